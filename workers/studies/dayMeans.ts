/** Mean of each whole day of hourly values: a daily swing is no drift. */
export function dayMeans(hourly: ArrayLike<number>): number[] {
  const days = Math.floor((hourly.length - 1) / 24);
  return Array.from({ length: days }, (_, day) => {
    let sum = 0;
    for (let hour = day * 24; hour < (day + 1) * 24; hour++) sum += hourly[hour]!;
    return sum / 24;
  });
}
