export const en = {
  onDay: (day: number, clock: string) => `day ${day}, ${clock}`,
  minutes: (minutes: string) => `${minutes} min`,
  hours: (hours: string) => `${hours} h`,
  days: (days: string) => `${days} days`,
  dateAndClock: (date: string, clock: string) => `${date}, ${clock}`,
};
