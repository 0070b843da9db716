declare module '@generated/wallflow-calculations/default/definitions.js' {
  import type { AnyCalculation } from '@wallflow/calculation';

  const definitions: Readonly<Record<string, () => Promise<AnyCalculation>>>;
  export default definitions;
}

declare module '@generated/wallflow-calculations/default/catalogue.json' {
  import type { CatalogueEntry } from './data/types.js';

  const catalogue: readonly CatalogueEntry[];
  export default catalogue;
}

declare module '*.module.css' {
  const classes: Readonly<Record<string, string>>;
  export default classes;
}
