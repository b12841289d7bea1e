/** What a person probably meant by a unit; to be offered, never applied. */
export interface UnitSuggestion {
  /** A UDUNITS spelling, or "1". */
  readonly units: string;
  /** Reason in words, without a full stop. */
  readonly because: string;
}

interface Trap {
  readonly typed: RegExp;
  readonly units: string | ((found: RegExpExecArray) => string);
  readonly because: string;
}

const degrees = "UDUNITS knows no blank inside a name";

/**
 * Spellings that people type and UDUNITS does not know, or reads as something else. Common practice, no source, but
 * for what UDUNITS makes of them.
 */
const TRAPS: readonly Trap[] = [
  {
    typed: /^p\.?s\.?[us]\.?(?:[- ]?78)?$|^practical salinity(?: units?)?$/i,
    units: "1",
    because: "practical salinity has no unit; the standard name says that it is one",
  },
  {
    typed: /^ppt$|^‰$|^o\/oo$|^0\/00$|^per ?mille?$|^parts per thousand$/i,
    units: "1e-3",
    because:
      "ppt is parts per trillion in UDUNITS; practical salinity takes 1, a mass fraction 1e-3 or g kg-1",
  },
  {
    typed: /^d[bB]$|^DB$|^DBAR$|^Dbar$|^decibars?\.$/,
    units: "dbar",
    because: "db is a decibarn, dB no unit",
  },
  {
    typed: /^n\.?m\.?i\.?$|^NM$|^naut(?:ical)?\.? miles?$/i,
    units: "nautical_mile",
    because: "nmi is a nanomile",
  },
  {
    typed: /^([mµμu]?)mhos?(?:\/cm| cm-1| cm\^-1|\.cm-1)$/i,
    units: ([, prefix]) => (/m/i.test(prefix!) ? "mS cm-1" : prefix ? "uS cm-1" : "S cm-1"),
    because: "the mho is the siemens",
  },
  {
    typed: /^([mµμu]?)mhos?(?:\/m| m-1| m\^-1|\.m-1)$/i,
    units: ([, prefix]) => (/m/i.test(prefix!) ? "mS m-1" : prefix ? "uS m-1" : "S m-1"),
    because: "the mho is the siemens",
  },
  {
    typed: /^(?:NTU|FTU|FNU|FTN)s?$/i,
    units: "1",
    because: "turbidity units belong in long_name or comment",
  },
  { typed: /^RFUs?$/i, units: "1", because: "relative fluorescence has no unit" },
  { typed: /^deg(?:ree)?s?[. ]+c(?:elsius)?\.?$|^[oº˚] ?C$|^° C$|^C$/i, units: "degC", because: degrees },
  { typed: /^deg(?:ree)?s?[. ]+f(?:ahrenheit)?\.?$|^[oº˚] ?F$|^° F$|^F$/i, units: "degF", because: degrees },
  {
    typed:
      /^deg(?:ree)?s?\.? *c(?:elsius)?,? *\(?(?:ITS|IPTS)[- ]?(?:90|68)\)?$|^(?:ITS|IPTS)[- ]?(?:90|68)(?:, *deg\.? *C)?$/i,
    units: "degC",
    because: "the temperature scale is not part of the unit",
  },
  {
    typed: /^m[gG]\/[lL][- ](?:O2|DO|N|P|Chl.*)$/,
    units: "mg L-1",
    because: "the substance belongs in the standard name",
  },
  {
    typed: /^[uµμ]E(?:\/m2\/s| m-2 s-1|\/\(m2 s\)|\/m\^2\/s)$/,
    units: "umol m-2 s-1",
    because: "E is no unit; an einstein is a mole",
  },
  {
    typed: /^[uµμ]g\/[lL] *(?:Chl.*|\(?chl.*)$/i,
    units: "ug L-1",
    because: "the substance belongs in the standard name",
  },
  { typed: /^m\/sec\.?$|^mps$|^m\/secs$/i, units: "m s-1", because: "write powers behind each symbol" },
  { typed: /^mtrs?\.?$|^mts\.?$|^mtr$/i, units: "m", because: "the metre is m" },
  { typed: /^ft\.$|^feets$/i, units: "ft", because: "abbreviations have no full stop" },
  { typed: /^secs?\.$/i, units: "s", because: "the second is s" },
  { typed: /^mins\.?$|^min\.$/i, units: "min", because: "symbols have no plural" },
  { typed: /^hrs\.?$|^hr\.$/i, units: "h", because: "symbols have no plural" },
  { typed: /^yrs\.?$/i, units: "year", because: "symbols have no plural" },
  { typed: /^pct\.?$|^per cent$|^percentage$/i, units: "%", because: "the sign is %" },
  {
    typed: /^(?:n\/?a|none|unitless|dimensionless|no units?|-+)$/i,
    units: "1",
    because: "a number without a unit has 1",
  },
  {
    typed: /^kg\/m\^?3 ?- ?1000$|^sigma(?:-?t|-?theta)?$/i,
    units: "kg m-3",
    because: "an anomaly has the unit of its quantity",
  },
];

const powerApart = /^(.*[A-Za-z]) (-\d)(?![\d.])(.*)$/;

/**
 * A better spelling for a unit as people type it: PSU, dB, deg C, mmho/cm, "m s -1" and the like. Offered for texts
 * that UDUNITS does not know and for some that it reads as something else (ppt, nmi, db).
 *
 * @returns null if nothing is known about the text. The caller asks the person; nothing is ever replaced silently.
 */
export function suggestUnits(text: string): UnitSuggestion | null {
  if (text.length > 200) return null;
  const trimmed = text
    .trim()
    .replace(/^[[(](.*)[\])]$/, "$1")
    .trim();
  for (const { typed, units, because } of TRAPS) {
    const found = typed.exec(trimmed);
    if (found) return { units: typeof units === "string" ? units : units(found), because };
  }
  if (powerApart.test(trimmed)) {
    let joined = trimmed;
    while (powerApart.test(joined)) joined = joined.replace(powerApart, "$1$2$3");
    return { units: joined, because: "a power stands at its unit without a blank" };
  }
  return null;
}
