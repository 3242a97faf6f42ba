/** FEMA P-499 (12/2010): above a 90 mph gust on the ASCE 7-05 map, about 115 mph on strength-level maps. */
export const HIGH_WIND_MPH = 115;
