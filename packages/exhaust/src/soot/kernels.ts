export {
  type SootLoadGiven,
  type SootLoadReference,
  sootLoadFrom,
  sootLoadIn,
  squareCellFiltrationArea,
} from './load/kernel.js';
