/** Temperature in K at which standard reductant freezes and thaws, −11.5 °C. */
export const freezingTemperature = 261.65;

/** Heat of fusion in J/kg and heat capacities in J/(kg·K) of standard reductant. */
export const heatOfFusion = 270e3;
export const liquidHeatCapacity = 3510;
export const frozenHeatCapacity = 1840;
