import { plainWords } from "../words.ts";

/** Names and abbreviations of the months, in twelve languages; each belongs to one month only. */
const NAMES: readonly string[] = [
  "january jan janvier janv januar janner enero ene janeiro gennaio gen januari tammikuu",
  "february feb fevrier fevr fev februar febrero fevereiro febbraio februari helmikuu",
  "march mar mars marz maerz mrz marzo marco maart mrt marts maaliskuu",
  "april apr avril avr abril abr aprile huhtikuu",
  "may mai mayo maio maggio mag mei maj toukokuu",
  "june jun juin juni junio junho giugno giu kesakuu",
  "july jul juillet juil juli julio julho luglio lug heinakuu",
  "august aug aout agosto ago augustus augusti elokuu",
  "september sep sept septembre septiembre setembro set settembre syyskuu",
  "october oct octobre oktober okt octubre outubro out ottobre ott lokakuu",
  "november nov novembre noviembre novembro marraskuu",
  "december dec decembre dezember dez diciembre dic dezembro dicembre desember des joulukuu",
];

const MONTHS = new Map<string, number>();
for (const [index, words] of NAMES.entries())
  for (const word of words.split(" ")) MONTHS.set(word, index + 1);

/** Month 1 to 12 that a word names, null for any other word. Finnish dates have the month in the partitive. */
export const monthOfWord = (word: string): number | null =>
  MONTHS.get(plainWords(word).replace(/kuuta$/, "kuu")) ?? null;
