import { createContext, useContext } from 'react';
import { checks } from './en/checks.ts';
import { engines } from './en/engines.ts';
import { findings } from './en/findings.ts';
import { followUp } from './en/follow-up.ts';
import { heat } from './en/heat.ts';
import { photos } from './en/photos.ts';
import { knowledge } from './en/knowledge.ts';
import { run } from './en/run.ts';
import { settings } from './en/settings.ts';
import { shell } from './en/shell.ts';
import { told } from './en/told.ts';
import { tray } from './en/tray.ts';

export const english = { told, shell, engines, settings, tray, run, checks, findings, heat, knowledge, photos, followUp };

/** All words of the page. Another language is another object of this type. */
export type Text = typeof english;

const Catalogue = createContext<Text>(english);

/** Serves the words of another catalogue to everything inside. */
export const TextProvider = Catalogue.Provider;

export const useText = (): Text => useContext(Catalogue);
