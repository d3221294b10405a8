/** The sun's center below the horizon at sunrise and sunset, degrees: refraction and the sun's radius, as almanacs have it. */
const SUNRISE_DEGREES = 0.8333;
/** Days from the epoch J2000 to noon of the day before 1 January of a year amid the cycle of leap years (2010). */
const DAYS_FROM_EPOCH = 3652;
const RADIANS = Math.PI / 180;

/** The sun's declination, radians: low-precision formula of the Astronomical Almanac (US Naval Observatory), good to 0.01° in any one year. */
function sunDeclination(dayOfYear: number): number {
  const n = DAYS_FROM_EPOCH + dayOfYear;
  const anomaly = (357.528 + 0.9856003 * n) * RADIANS;
  const longitude = (280.46 + 0.9856474 * n + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * RADIANS;
  return Math.asin(Math.sin(23.439 * RADIANS) * Math.sin(longitude));
}

/**
 * Hours from sunrise to sunset: twice the hour angle at which the sun stands at the horizon. Within two minutes of an
 * almanac below 50° N. 0 and 24 beyond the polar circles.
 * @param dayOfYear 1–365
 * @param lat degrees, north positive
 */
export function dayLengthHours(dayOfYear: number, lat: number): number {
  const declination = sunDeclination(dayOfYear);
  const latitude = lat * RADIANS;
  const cosine = (-Math.sin(SUNRISE_DEGREES * RADIANS) - Math.sin(latitude) * Math.sin(declination)) / (Math.cos(latitude) * Math.cos(declination));
  return (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)));
}
