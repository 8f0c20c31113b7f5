const LONGEST_PATH = 240; // below the 260 characters that some file systems allow with a drive and a folder before it

/** A relative path with forward slashes that every file system takes as itself and that stays below where it starts. */
export function isPlainPath(path: string): boolean {
  if (path.length === 0 || path.length > LONGEST_PATH || /[\\:*?"<>|\x00-\x1f\x7f]/.test(path)) return false;
  return path.normalize('NFC') === path && path.split('/').every((name) => name !== '' && !/^\.{1,2}$/.test(name) && !/[. ]$/.test(name));
}
