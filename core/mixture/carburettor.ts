import { stoichiometricRatio, type Fuel } from './fuels.ts';

/**
 * Lambda of a plain carburettor on other air: a jet meters by the square root of the air's density. Not for constant-depression or compensated
 * carburettors, idle circuits or injection. Source: worked examples in textbooks. Grade: published.
 * @param densityRatio new over old density of the air
 */
export const lambdaOnOtherAir = (lambda: number, densityRatio: number): number => lambda * Math.sqrt(densityRatio);

/** Lambda of a plain carburettor on another fuel of about the same density: the jets pass the same mass. Grade: conservation, published constants. */
export const lambdaOnOtherFuel = (lambda: number, was: Fuel, is: Fuel): number => lambda * (stoichiometricRatio(was) / stoichiometricRatio(is));

/** Factor on the diameter of the main jet that holds lambda on other air: area by the square root of density. */
export const jetDiameterFactor = (densityRatio: number): number => densityRatio ** 0.25;
