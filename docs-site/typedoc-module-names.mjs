import { Converter, ReflectionKind } from 'typedoc';

/** Pages of the reference carry the name that an import uses: `units/exact` instead of `units/src/exact`. */
export function load(app) {
  app.converter.on(Converter.EVENT_CREATE_DECLARATION, (_context, reflection) => {
    if (reflection.kindOf(ReflectionKind.Module)) reflection.name = reflection.name.replace(/\/src(?=\/|$)/, '');
  });
}
