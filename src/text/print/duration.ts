/** Printing of durations as people say them; minutes inside the house. */

/**
 * '9 h 40 min', '35 min', '50 s'. Whole minutes from three minutes on, whole seconds below that; days are not used, since a
 * shop counts machine hours.
 */
export const printDuration = (minutes: number): string => {
  const sign = minutes < 0 ? '-' : '';
  const size = Math.abs(minutes);
  if (size * 60 < 179.5) return sign + printSeconds(Math.round(size * 60));
  const whole = Math.round(size);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${sign}${rest} min`;
  return rest === 0 ? `${sign}${hours} h` : `${sign}${hours} h ${rest} min`;
};

const printSeconds = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  const rest = seconds % 60;
  if (minutes === 0) return `${rest} s`;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
};
