/** CDL of two casts in a contiguous ragged array, for the examples of rules; each part can be replaced. */
export function castsCdl(
  parts: { count?: string; depth?: string; data?: string; rows?: string; more?: string } = {},
): string {
  return `:featureType = "profile" ;
dimensions: cast = 2 ; obs = 3 ; id_length = 2 ;
variables:
  char cast_id(cast, id_length) ; cast_id:cf_role = "profile_id" ;
  ${parts.count ?? 'int rows(cast) ; rows:sample_dimension = "obs" ;'}
  double time(cast) ; time:standard_name = "time" ; time:units = "days since 2000-01-01" ;
  double lat(cast) ; lat:standard_name = "latitude" ; lat:units = "degrees_north" ;
  double lon(cast) ; lon:standard_name = "longitude" ; lon:units = "degrees_east" ;
  ${parts.depth ?? 'float depth(obs) ; depth:standard_name = "depth" ; depth:units = "m" ; depth:axis = "Z" ;'}
  ${parts.data ?? 'float temp(obs) ; temp:coordinates = "time lat lon depth" ;'}
  ${parts.more ?? ""}
data:
  cast_id = "a1", "a2" ; time = 0, 1 ; lat = 50, 51 ; lon = 3, 4 ; ${parts.rows ?? "rows = 1, 2 ;"}
`;
}
