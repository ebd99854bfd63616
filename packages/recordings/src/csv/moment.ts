/** A day and a time, or a time of the day, as loggers write them: 2026-05-18T10:00:00.250Z, 2026-05-18 10:00:00,250, 10:00:00.250. */
const MOMENT = /^(?:(\d{4})[-/.](\d{2})[-/.](\d{2})[T ])?(\d{2}):(\d{2}):(\d{2})(?:[.,](\d+))?(?:Z|([+-])(\d{2}):?(\d{2}))?$/;

const [MINUTE, HOUR] = [60, 3600];
const MILLISECONDS = 1000;

/** Seconds since 1970, or since midnight where no day is given; null where the text is no moment. Time without a zone is taken as it stands. */
export function momentSeconds(text: string): number | null {
  const found = MOMENT.exec(text.trim());
  if (found === null) return null;
  const [, year, month, day, hour, minute, second, fraction = "", sign, zoneHour, zoneMinute] = found;
  const whole = Number(hour) * HOUR + Number(minute) * MINUTE + Number(second);
  const days = year === undefined ? 0 : Date.UTC(Number(year), Number(month) - 1, Number(day)) / MILLISECONDS;
  const zone = sign === undefined ? 0 : (sign === "-" ? -1 : 1) * (Number(zoneHour) * HOUR + Number(zoneMinute) * MINUTE);
  return days - zone + whole + Number(`0.${fraction || "0"}`);
}
