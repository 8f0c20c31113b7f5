import { casesAndFiles } from './1-cases-and-files.ts';
import { overview } from './2-overview.ts';
import type { Migration } from './migration.ts';

/** In order, without gaps. */
export const MIGRATIONS: readonly Migration[] = [casesAndFiles, overview];
export const NEWEST_VERSION = MIGRATIONS.length;
