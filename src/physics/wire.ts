/** A wire the shop can buy or has on the shelf. */

export interface Wire {
  /** Key in job and shop files: 'brass-0.25'. */
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly diameter: number;
  readonly kind: 'brass' | 'coated brass' | 'molybdenum' | 'tungsten' | 'steel-cored';
  /** g/cm3 of the whole wire. */
  readonly density: number;
  /** N while cutting. */
  readonly tension: number;
  /** m/min while roughing. */
  readonly speed: number;
  /** Minor money units per kg. */
  readonly price: number;
  /** kg on one spool. */
  readonly spool: number;
  readonly inStock: boolean;
}
