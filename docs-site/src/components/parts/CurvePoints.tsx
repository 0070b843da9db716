import type { ReactNode } from 'react';
import type { CurveView } from '../../data/evidence.js';
import styles from './evidence.module.css';
import { Scroll } from './Scroll.js';

function Unit({ unit }: { readonly unit: string }): ReactNode {
  return unit === '' ? null : <span className="unit"> {unit}</span>;
}

/** Measured, every model and the difference, point by point. */
export function CurvePoints({ curve }: { readonly curve: CurveView }): ReactNode {
  const printed = curve.points.some((point) => point.printed !== undefined);
  const warns = curve.points.some((point) => point.models.some((model) => model.warns));
  return (
    <>
      <Scroll label={`Points of ${curve.title}`} keepsFirst>
        <table className={styles.points}>
          <thead>
            <tr>
              <th scope="col">{curve.variable}</th>
              {printed ? <th scope="col">As printed</th> : null}
              <th scope="col">
                {curve.measuredLabel}
                <Unit unit={curve.unit} />
              </th>
              {curve.models.map(({ name }) => [
                <th key={name} scope="col" className={styles.model}>
                  {name}
                  <Unit unit={curve.unit} />
                </th>,
                <th key={`${name} difference`} scope="col">
                  Difference
                </th>,
              ])}
              {curve.publishedColumns.map((column) => (
                <th key={column} scope="col">
                  Error of the authors’ model at {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {curve.points.map((point) => (
              <tr key={point.at}>
                <th scope="row">{point.at}</th>
                {printed ? <td>{point.printed}</td> : null}
                <td>{point.measured}</td>
                {point.models.map((model, index) => [
                  <td key={`${index} value`} className={styles.model}>
                    {model.value}
                    {model.warns ? (
                      <>
                        <span aria-hidden="true" className={styles.warns}>
                          {' '}
                          !
                        </span>
                        <span className="visually-hidden"> with a warning</span>
                      </>
                    ) : null}
                  </td>,
                  <td key={`${index} difference`}>{model.difference}</td>,
                ])}
                {point.published.map((text, index) => (
                  <td key={curve.publishedColumns[index]}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      {warns ? (
        <p className={styles.note}>
          <span className={styles.warns}>!</span> The calculation itself warns at this point. The words of all warnings stand under Models.
        </p>
      ) : null}
    </>
  );
}
