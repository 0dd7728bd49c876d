/** What the families of metals are called. */
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Family } from './material.ts';

export const familyWords: Readonly<Record<Family, Text>> = phrases('family', {
  'tool steel': say`tool steel`,
  steel: say`steel`,
  stainless: say`stainless`,
  carbide: say`carbide`,
  aluminium: say`aluminium`,
  titanium: say`titanium`,
  'nickel alloy': say`nickel alloy`,
  copper: say`copper`,
  brass: say`brass`,
  graphite: say`graphite`,
  refractory: say`refractory`,
  pcd: say`pcd`,
  magnesium: say`magnesium`,
  zirconium: say`zirconium`,
});
