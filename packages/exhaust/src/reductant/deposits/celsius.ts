/** Published deposit temperatures are printed in °C; the data hold them in K. */
export const celsiusToKelvin = (celsius: number): number => celsius + 273.15;
