const two = (n: number) => String(n).padStart(2, '0');

/** "14:05", and from the second day on "day 2, 14:05". */
export function clockText(timeH: number, clockHour: number): string {
  const minutes = Math.round((timeH + clockHour) * 60);
  const clock = `${two(Math.floor((minutes % 1440) / 60))}:${two(minutes % 60)}`;
  const day = Math.floor(minutes / 1440) + 1;
  return day === 1 ? clock : `day ${day}, ${clock}`;
}

/** "38 min", "4.2 h", "3.1 days". */
export function spanText(hours: number): string {
  if (hours < 1.95) return `${Math.max(1, Math.round(hours * 60))} min`;
  if (hours < 48) return `${Number(hours.toFixed(1))} h`;
  return `${Number((hours / 24).toFixed(1))} days`;
}
