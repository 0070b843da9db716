import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import type { CurveView } from '../../data/evidence.js';
import { EvidencePage } from '../parts/EvidencePage.js';
import { MeasuredCurve } from '../parts/MeasuredCurve.js';
import { Scroll } from '../parts/Scroll.js';

function Overview({ curves }: { readonly curves: readonly CurveView[] }): ReactNode {
  return (
    <Scroll label="All curves">
      <table>
        <caption>Smallest and largest difference of each model from the measurement</caption>
        <thead>
          <tr>
            <th scope="col">Curve</th>
            <th scope="col">Points</th>
            <th scope="col">Model</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        {curves.map((curve) => (
          <tbody key={curve.id}>
            {curve.models.length === 0 ? (
              <tr>
                <th scope="row">
                  <a href={`#${curve.id}`}>{curve.title}</a>
                </th>
                <td>{curve.points.length}</td>
                <td colSpan={2}>cannot be computed</td>
              </tr>
            ) : (
              curve.models.map((model, index) => (
                <tr key={model.name}>
                  {index === 0 ? (
                    <>
                      <th scope="rowgroup" rowSpan={curve.models.length}>
                        <a href={`#${curve.id}`}>{curve.title}</a>
                      </th>
                      <td rowSpan={curve.models.length}>{curve.points.length}</td>
                    </>
                  ) : null}
                  <td>{model.name}</td>
                  <td>{model.differences}</td>
                </tr>
              ))
            )}
          </tbody>
        ))}
      </table>
    </Scroll>
  );
}

/** Every published curve beside what the models give at each of its points. */
export default function MeasuredPage({ evidence }: { readonly evidence: readonly CurveView[] }): ReactNode {
  return (
    <EvidencePage
      title="Measured curves"
      purpose="Pressure drops that others measured on filters, at every published point beside what our models give, with all inputs, and with where the models fail."
    >
      <p>
        A difference is model over measurement, less one. The models were run when this page was built. See also{' '}
        <Link to="/validation/misprints">misprints in these sources</Link> and the guide to the{' '}
        <Link to="/guide/filter">particulate filter</Link>.
      </p>
      <Overview curves={evidence} />
      {evidence.map((curve) => (
        <MeasuredCurve key={curve.id} curve={curve} />
      ))}
    </EvidencePage>
  );
}
