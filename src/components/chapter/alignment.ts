import type { HastPluginDefinition } from 'satteri';

/**
 * Markdown's column alignment as a class. The site's policy refuses style attributes, which the Markdown processor would
 * write; page.css has the classes `align-left`, `align-center`, `align-right`.
 */
export const alignmentClasses: HastPluginDefinition = {
  name: 'oilway-alignment',
  element: [
    {
      filter: ['td', 'th'],
      visit(node, context) {
        const written = String(node.properties?.['align'] ?? node.properties?.['style'] ?? '');
        const side = /left|center|right/.exec(written)?.[0];
        if (side === undefined) return;
        context.setProperty(node, 'align', undefined);
        context.setProperty(node, 'style', undefined);
        context.setProperty(node, 'className', [`align-${side}`]);
      },
    },
  ],
};
