/** Below this Practical Salinity river salts may be most of the salt. */
export const COMPOSITION_SALINITY = 2;

/**
 * How much denser than computed water thinned by rivers may be, since river salts conduct less for their mass.
 *
 * One-sided, of no known distribution, and different from river to river: it is stated in words beside the density,
 * not added to `densityUncertainty`, and neither flags nor corrects anything.
 *
 * @param SP Practical Salinity, unit 1
 * @returns  0.1 kg m-3 below SP 2, 0 from there on, NaN if the input is NaN
 * @source   our own choice, the middle on a logarithmic scale of the 0.02 to 0.3 kg m-3 that Pawlowicz (2015),
 *           Deep-Sea Res. I 101, 71-79, gives for rivers of the world (its abstract)
 */
export function densityCompositionTerm(SP: number): number {
  return term(SP);
}

/**
 * How much more salt than computed water thinned by rivers may hold: the counterpart of
 * {@link densityCompositionTerm} with a haline contraction of 8e-4 kg g-1.
 *
 * @param SP Practical Salinity, unit 1
 * @returns  0.1 g kg-1 of Absolute Salinity below SP 2, 0 from there on, NaN if the input is NaN
 * @source   as {@link densityCompositionTerm}
 */
export function absoluteSalinityCompositionTerm(SP: number): number {
  return term(SP);
}

// 0.1 kg m-3 over 1000 kg m-3 x 8e-4 kg g-1 is 0.125 g kg-1, stated to one digit
const term = (SP: number): number => (Number.isNaN(SP) ? Number.NaN : SP < COMPOSITION_SALINITY ? 0.1 : 0);
