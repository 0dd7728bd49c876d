/** Which elements of SVG are never drawn where they stand. */

/** Kinds that define something, or describe it, and are drawn only where something else asks for them. */
export const NOT_DRAWN: ReadonlySet<string> = new Set([
  ...['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'linearGradient', 'radialGradient', 'filter', 'view', 'cursor', 'font'],
  ...['title', 'desc', 'metadata', 'style', 'script', 'set', 'animate', 'animateTransform', 'animateMotion', 'solidColor', 'color-profile'],
]);
