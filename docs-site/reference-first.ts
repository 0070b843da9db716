import type { PluginOptions } from '@docusaurus/plugin-content-docs';

/** The generated reference begins with its list of packages instead of having it in the middle. */
export const referenceFirst: PluginOptions['sidebarItemsGenerator'] = async ({ defaultSidebarItemsGenerator, ...args }) => {
  const items = await defaultSidebarItemsGenerator({ ...args });
  const list = 'api/index';
  return [{ type: 'doc', id: list, label: 'All packages' }, ...items.filter((item) => item.type !== 'doc' || item.id !== list)];
};
