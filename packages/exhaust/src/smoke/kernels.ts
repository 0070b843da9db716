export { absorptionFromOpacity, opacityFromAbsorption } from './opacity-conversion/kernel.js';
