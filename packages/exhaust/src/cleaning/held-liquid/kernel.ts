/** Volume of the pores in the walls of a honeycomb in m³, from face area, open area, length (m², m², m) and porosity. */
export function wallPoreVolume(faceArea: number, openArea: number, length: number, porosity: number): number {
  return (faceArea - openArea) * length * porosity;
}

/** Height in m to which a wetting liquid stands in a pore: 2 a²/d, with the capillary constant a² = 2σ/(ρg) in m². */
export function capillaryHeight(poreDiameter: number, capillaryConstant: number): number {
  return (2 * capillaryConstant) / poreDiameter;
}
