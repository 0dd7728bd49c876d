/** What of an element's style matters to its outline: whether it is shown, moved or clipped. */
import type { Element } from './markup.ts';

/** A property from the `style` attribute, which goes before the attribute of the same name. */
export const styled = (element: Element, property: string): string | undefined =>
  element.styles.get(property) ?? element.attributes.get(property)?.trim();

/** Visibility passes on to children, which may show themselves again; what is not displayed stays so with all in it. */
export interface Shown {
  readonly displayed: boolean;
  readonly visible: boolean;
}

export const shownWithin = (around: Shown, element: Element): Shown => {
  const visibility = styled(element, 'visibility');
  return {
    displayed: around.displayed && styled(element, 'display') !== 'none',
    visible: visibility === undefined || visibility === 'inherit' ? around.visible : visibility === 'visible',
  };
};
