/**
 * Primary quality flags.
 *
 * @source IOC Manuals and Guides 54, volume 3 (2013), primary level
 */
export const Flag = { good: 1, notEvaluated: 2, questionable: 3, bad: 4, missing: 9 } as const;
export type Flag = (typeof Flag)[keyof typeof Flag];
