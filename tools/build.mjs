// npm run build: what the packages publish.
import { buildPackages, checkTypes } from './support/build-packages.mjs';
import { step } from './support/step.mjs';

await step('Checking the types', checkTypes);
await step('Building the packages', buildPackages);
