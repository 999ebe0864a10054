import type { SpecificationContent } from '../../../../contract/specification.ts';
import { specificationGroups, specificationLines } from '../../../../contract/specification-lines.ts';
import { useUnits } from '../../../kitchen.tsx';
import { DimensionPicture } from './dimension-picture.tsx';

/** A version that was sent, to read: everything that is asked, grouped as the job goes. */
export function SpecificationRead({
  content,
  species,
}: {
  readonly content: SpecificationContent;
  readonly species: string;
}) {
  const units = useUnits();
  const lines = specificationLines(content, units);
  return (
    <div className="asked">
      {specificationGroups.map((group) => {
        const own = lines.filter((l) => l.group === group);
        if (own.length === 0) return null;
        return (
          <section key={group} className="asked-group stack">
            <h3>{group.replace(/^./, (c) => c.toUpperCase())}</h3>
            {group === 'where it is cut' && content.dimensions.length > 0 ? (
              <DimensionPicture species={species} what={content.what} dimensions={content.dimensions} />
            ) : null}
            <dl className="asked-lines">
              {own.map((l, i) => (
                <div key={`${l.key} ${i}`}>
                  <dt>{l.label}</dt>
                  <dd>{l.text}</dd>
                </div>
              ))}
            </dl>
          </section>
        );
      })}
    </div>
  );
}
