/** The material of a job: one of the shop's own, or one of the house. */

import { findMaterial } from '../physics/material/find-material.ts';
import type { Material } from '../physics/material/material.ts';
import { materialFromConstants } from '../physics/material/shop-material.ts';
import type { Finding } from '../text/finding.ts';
import type { Shop } from './shop.ts';

export type JobMaterial =
  | { readonly kind: 'material'; readonly material: Material; readonly findings: readonly Finding[] }
  | { readonly kind: 'non-conductor'; readonly finding: Finding }
  | { readonly kind: 'unknown'; readonly finding: Finding };

/** The shop's materials come first. A rate that had to be estimated from constants is told. */
export const materialOf = (id: string, shop: Shop): JobMaterial => {
  const own = shop.materials.find((m) => m.id === id.trim().toLowerCase());
  if (own !== undefined) return materialFromConstants(own);
  const found = findMaterial(id);
  return found.kind === 'material' ? { ...found, findings: [] } : found;
};
