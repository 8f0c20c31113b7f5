import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** Every file with one of the endings below a folder, in order of path. */
export function filesBelow(folder: string, endings: readonly string[]): SourceFile[] {
  const found: SourceFile[] = [];
  const walk = (at: string): void => {
    for (const entry of readdirSync(at, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const path = join(at, entry.name);
      if (entry.isDirectory()) {
        if (!['node_modules', 'dist', 'out', '.git'].includes(entry.name)) walk(path);
      } else if (endings.some((ending) => entry.name.endsWith(ending))) found.push({ path, text: readFileSync(path, 'utf8') });
    }
  };
  walk(folder);
  return found;
}

/** What a TypeScript file imports or re-exports, as written. */
export function importsOf({ text }: SourceFile): string[] {
  const statements = text.matchAll(/(?:^|\n)\s*(?:import|export)\b[^;]*?\bfrom\s+'([^']+)'/g);
  const bare = text.matchAll(/(?:^|\n)\s*import\s+'([^']+)'/g);
  const dynamic = text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g);
  return [...statements, ...bare, ...dynamic].map((match) => match[1]!);
}

/** Text without comments, string and template contents: what is left is code. */
export function codeOnly(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, ' ')
    .replace(/(^|[^:\\])\/\/[^\n]*/g, '$1')
    .replace(/'(?:[^'\\\n]|\\.)*'/g, "''")
    .replace(/String\.raw`[^`]*`/g, "''")
    .replace(/"(?:[^"\\\n]|\\.)*"/g, '""');
}
