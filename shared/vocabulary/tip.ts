/** What a reader can say of one firing end, part by part. Every facet holds one value; an absent facet was not observed. */
export const TIP_FACETS = {
  noseColour: ['white', 'light grey', 'light tan', 'brown', 'dark brown', 'dark grey', 'black', 'yellow', 'reddish', 'greenish'],
  noseSurface: ['bare', 'fine powder', 'matt soot', 'wet', 'glossy glaze', 'crust', 'blistered', 'fused spots'],
  deposit: [
    'none', 'light dusting', 'carbon of unknown kind', 'heavy tan', 'dry soot', 'wet oil', 'wet fuel', 'wet of unknown kind', 'hard carbon',
    'ash crust', 'lead beads', 'lead film', 'lead of unknown form', 'glaze', 'metal spray', 'water', 'rust-coloured film',
  ],
  coverage: ['none', 'light', 'partial', 'full', 'one-sided'],
  specks: ['none', 'dark pepper', 'grey metallic', 'shiny beads'],
  bridge: ['none', 'gap bridged', 'core bridged'],
  centreElectrode: ['sharp', 'lightly worn', 'rounded', 'eroded', 'pitted', 'blued', 'blistered', 'melted', 'missing'],
  groundElectrode: ['as new', 'lightly worn', 'pitted', 'worn thin', 'hollowed underneath', 'blued', 'melted', 'bent', 'broken off'],
  heatLine: ['near the end', 'at the bend', 'near the weld', 'none visible'],
  shellRim: ['bare metal', 'light grey', 'even soot', 'heavy soot', 'wet oil', 'blued', 'ash'],
  sootRing: ['none', 'thin', 'wide'],
  noseDamage: ['none', 'hairline crack', 'cracked', 'chipped', 'broken away'],
  insulator: ['firm', 'loose in shell', 'cracked above the shell'],
  body: ['clean', 'corona stain', 'flashover track', 'carbon track'],
  terminal: ['sound', 'loose', 'corroded'],
  seat: ['sound', 'leakage marks', 'loose when removed', 'loose with leakage marks', 'gasket missing', 'gasket doubled'],
  threads: ['clean', 'first turns carboned', 'damaged', 'lubricant present'],
  contact: ['none', 'closed by piston', 'debris marks'],
} as const;

export type FacetName = keyof typeof TIP_FACETS;
export type FacetValue<F extends FacetName = FacetName> = (typeof TIP_FACETS)[F][number];

export const FACET_NAMES = Object.keys(TIP_FACETS) as readonly FacetName[];

/** What a reader who saw no more than that can say of a plug. */
export const OVERALL = [
  'looks normal', 'looks unfired', 'fouled, kind unknown', 'differs from its neighbours', 'lighter than its neighbours',
  'darker than its neighbours',
] as const;
export type Overall = (typeof OVERALL)[number];
