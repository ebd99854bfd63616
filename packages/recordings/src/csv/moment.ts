/**
 * A day and a time, or a time of the day, as loggers write them: 2026-05-18T10:00:00.250Z, 18.05.2026 10:00:00,250, 10:00:00.250, 10:00:00.250 AM. Of 05/06/2026 nobody can
 * say which is the month; the first is taken, unless it is none. Where that is wrong, a recording over midnight has a gap.
 */
const MOMENT =
  /^(?:(?:(?<year>\d{4})[-/.](?<month>\d{2})[-/.](?<day>\d{2})|(?<first>\d{1,2})(?<mark>[/.-])(?<second>\d{1,2})\k<mark>(?<lastYear>\d{4}))(?:T|,? ))?(?<h>\d{1,2}):(?<min>\d{2}):(?<s>\d{2})(?:(?:[.,]|:(?=\d{3}$))(?<part>\d+))?(?: ?(?<half>[AP])\.?M\.?)?(?:Z|(?<sign>[+-])(?<zoneH>\d{2}):?(?<zoneMin>\d{2}))?$/i;
/** Minutes and seconds with a part of a second; without one it could be hours and minutes. */
const STOPWATCH = /^(\d{1,4}):([0-5]\d[.,]\d+)$/;

const [MINUTE, HOUR] = [60, 3600];
const MILLISECONDS = 1000;
const [MONTHS, HALF_DAY] = [12, 12];

/** Seconds since 1970, or since midnight or a start where no day is given; null where the text is no moment. Time without a zone is taken as it stands. */
export function momentSeconds(text: string): number | null {
  const trimmed = text.trim();
  const found = MOMENT.exec(trimmed)?.groups;
  if (found === undefined) return stopwatchSeconds(trimmed);
  const { h, min, s, part = "", half, sign, zoneH, zoneMin } = found;
  const hour = half === undefined ? Number(h) : (Number(h) % HALF_DAY) + (/p/i.test(half) ? HALF_DAY : 0);
  const whole = hour * HOUR + Number(min) * MINUTE + Number(s);
  const zone = sign === undefined ? 0 : (sign === "-" ? -1 : 1) * (Number(zoneH) * HOUR + Number(zoneMin) * MINUTE);
  return daySeconds(found) - zone + whole + Number(`0.${part || "0"}`);
}

/** Seconds from 1970 to the beginning of a day; 0 where none is given. */
function daySeconds({ year, month, day, first, second, mark, lastYear }: Readonly<Record<string, string | undefined>>): number {
  if (year !== undefined) return Date.UTC(Number(year), Number(month) - 1, Number(day)) / MILLISECONDS;
  if (lastYear === undefined) return 0;
  const dayFirst = mark === "." || Number(first) > MONTHS;
  const [m, d] = dayFirst ? [second, first] : [first, second];
  return Date.UTC(Number(lastYear), Number(m) - 1, Number(d)) / MILLISECONDS;
}

function stopwatchSeconds(text: string): number | null {
  const [, minutes, seconds] = STOPWATCH.exec(text) ?? [];
  return seconds === undefined ? null : Number(minutes) * MINUTE + Number(seconds.replace(",", "."));
}
