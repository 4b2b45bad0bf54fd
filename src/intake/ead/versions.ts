import { EAD2002_NAMESPACE } from '../../xml/older-ead.ts';
import type { EadVersion } from './found.ts';

export const EAD3_NAMESPACE = 'http://ead3.archivists.org/schema/';
export const NAMESPACES: Readonly<Record<EadVersion, string>> = {
  ead3: EAD3_NAMESPACE,
  ead2002: EAD2002_NAMESPACE,
};

/** The version of EAD that an outermost element tells; undefined where it is neither. */
export function versionOf(name: string, namespace: string): EadVersion | undefined {
  if (name !== 'ead') return undefined;
  if (namespace === EAD3_NAMESPACE) return 'ead3';
  return namespace === EAD2002_NAMESPACE ? 'ead2002' : undefined;
}
