/**
 * Everything under one name: units, numerics, the definition language, physics and the workshop job. The kinds of quantity
 * stand here under their own names too, so that a bundler takes one without the others.
 *
 * @module
 */
import { createRegistry, type Registry } from '@wallflow/calculation';
import { calculations as exhaustCalculations } from '@wallflow/exhaust/calculations';
import { calculations as workshopCalculations } from '@wallflow/workshop';

export * as calculation from '@wallflow/calculation';
export * as exhaust from '@wallflow/exhaust';
export * as logs from '@wallflow/logs';
export * as numerics from '@wallflow/numerics';
export * as units from '@wallflow/units';
export * from '@wallflow/units';
export * as workshop from '@wallflow/workshop';

/** Every calculation by id and subject. */
export const registry: Registry = /* @__PURE__ */ createRegistry(exhaustCalculations, workshopCalculations);
