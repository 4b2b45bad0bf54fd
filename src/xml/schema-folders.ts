import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';

/** Where to look for published schemas; what is left out is that of this process and machine. */
export interface SchemaPlaces {
  /** The folder given with `--schemas`. */
  folder?: string | undefined;
  env?: Readonly<Record<string, string | undefined>>;
  platform?: NodeJS.Platform;
  home?: string;
}

/** A folder that may hold published schemas, and who named it. */
export interface SchemaFolder {
  path: string;
  namedBy: '--schemas' | 'KINFONDS_SCHEMAS' | 'cache';
}

/** The folder of this user into which `kinfonds schemas --get` puts what it fetches. */
export function cacheFolder({
  env = process.env,
  platform = process.platform,
  home = homedir(),
}: SchemaPlaces = {}) {
  return join(userCache(env, platform, home), 'kinfonds', 'schemas');
}

function userCache(
  env: Readonly<Record<string, string | undefined>>,
  platform: string,
  home: string,
): string {
  if (platform === 'win32') return env.LOCALAPPDATA || join(home, 'AppData', 'Local');
  // XDG Base Directory Specification: a relative path counts as none.
  const chosen = env.XDG_CACHE_HOME ?? '';
  if (isAbsolute(chosen)) return chosen;
  return platform === 'darwin' ? join(home, 'Library', 'Caches') : join(home, '.cache');
}

/** The folders to look in, the first to be asked first. */
export function schemaFolders(places: SchemaPlaces = {}): SchemaFolder[] {
  const { folder, env = process.env } = places;
  const named: SchemaFolder[] = [];
  if (folder !== undefined) named.push({ path: folder, namedBy: '--schemas' });
  if (env.KINFONDS_SCHEMAS) named.push({ path: env.KINFONDS_SCHEMAS, namedBy: 'KINFONDS_SCHEMAS' });
  return [...named, { path: cacheFolder(places), namedBy: 'cache' }];
}
