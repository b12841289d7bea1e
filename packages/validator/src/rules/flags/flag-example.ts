/** A variable with a flag variable, as CDL. */
export const flagged = (
  data: { v: string; q: string },
  attributes = 'q:flag_values = 1b, 2b, 3b, 4b, 9b ; q:flag_meanings = "good not_evaluated questionable bad missing" ;',
): string => `dimensions: n = 3 ; variables:
  float v(n) ; v:_FillValue = -9.f ; v:ancillary_variables = "q" ;
  byte q(n) ; q:standard_name = "quality_flag" ; ${attributes}
  data: v = ${data.v} ; q = ${data.q} ;`;
