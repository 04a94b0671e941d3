/**
 * Heat transfer from gas to wall, W/(m² K). Hohenberg's form. Source: G. F. Hohenberg, SAE 790825; constant 129.8 in a public page, 130 in print.
 * @param volume m³  @param pressure Pa  @param kelvin mean gas  @param speed mean piston speed, m/s
 */
export const wallCoefficient = (volume: number, pressure: number, kelvin: number, speed: number): number =>
  130 * volume ** -0.06 * (pressure / 1e5) ** 0.8 * kelvin ** -0.4 * (speed + 1.4) ** 0.8;
