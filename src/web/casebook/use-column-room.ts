import { useSyncExternalStore } from 'react';

const CHECKS = 172; // px: the column of names, as in casebook.css
const UNIT = 206;
const PANEL = 376;
const PANEL_BELOW = 1100; // from here down the panel stands below
const NO_COLUMNS = 700;

/** How many cases fit side by side; more than that are rows. */
export function columnRoom(width: number): number {
  if (width <= NO_COLUMNS) return 0;
  return Math.floor((width - CHECKS - (width > PANEL_BELOW ? PANEL : 0)) / UNIT);
}

export function useColumnRoom(): number {
  return useSyncExternalStore(
    (heard) => {
      window.addEventListener('resize', heard);
      return () => window.removeEventListener('resize', heard);
    },
    () => columnRoom(document.documentElement.clientWidth),
  );
}
