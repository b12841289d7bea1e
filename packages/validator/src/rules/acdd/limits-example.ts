/** CDL of a cast with the attributes given, for the examples of rules on limits. */
export const castCdl = (attributes: string): string => `${attributes}
dimensions: z = 2 ;
variables:
  double time ; time:standard_name = "time" ; time:units = "seconds since 2030-05-04 10:00:00" ;
  double lat ; lat:standard_name = "latitude" ; lat:units = "degrees_north" ;
  double lon ; lon:standard_name = "longitude" ; lon:units = "degrees_east" ;
  double z(z) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ;
  float t(z) ; t:coordinates = "time lat lon z" ;
data: time = 60 ; lat = 50.5 ; lon = -3.25 ; z = 1, 9 ;
`;
