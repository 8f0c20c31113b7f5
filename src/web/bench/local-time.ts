const PAD = 2;

/** The bench's wall clock without a zone, as the case keeps it: "2026-03-04T14:05:40". */
export function localTime(now: Date): string {
  const two = (part: number): string => String(part).padStart(PAD, '0');
  const day = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join('-');
  return `${day}T${[two(now.getHours()), two(now.getMinutes()), two(now.getSeconds())].join(':')}`;
}

/** "14:05:40". */
export function clockText(local: string): string {
  return local.slice(local.indexOf('T') + 1);
}

/** Seconds as "1:05". */
export function countText(seconds: number): string {
  const MINUTE = 60;
  return `${Math.floor(seconds / MINUTE)}:${String(Math.floor(seconds % MINUTE)).padStart(PAD, '0')}`;
}
