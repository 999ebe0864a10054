/** What the food is, as far as the rules ask: read from the method, and said here where the method does not show it. */
import { nitriteHandedOn } from '../../../../contract/handed-on.ts';
import { productOf } from '../../../../contract/product-of.ts';
import type { CookStep, Food, Method } from '../../../../contract/steps.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';

export interface FoodFieldsProps {
  readonly step: CookStep;
  readonly method: Method;
  readonly species: string;
  readonly part: string;
  readonly readOnly: boolean;
  readonly onChange: (food: Food) => void;
}

const asked = [
  { key: 'minced', form: 'minced', label: 'Minced' },
  { key: 'stuffedOrRolled', form: 'stuffed or rolled', label: 'Stuffed or rolled' },
  { key: 'injectedOrTenderised', form: 'injected or tenderised', label: 'Injected or tenderised' },
] as const;

const word = (is: boolean | null) => (is === null ? 'not known' : is ? 'yes' : 'no');

/** Where nitrite comes from that is not said here, and why it may not count. */
function nitriteHint(method: Method, stepId: string): string {
  const handed = nitriteHandedOn(method, stepId);
  if (handed === null) return 'Sodium nitrite, mg a kilogram. Empty: not known, as if none.';
  return handed.ppm === null
    ? `Sodium nitrite, mg a kilogram. Empty: as if none. That of “${handed.from.name}” does not count: ${handed.why}.`
    : `Sodium nitrite, mg a kilogram. Empty: ${handed.ppm} from “${handed.from.name}”, as weighed in. Say less, or 0, to overrule it.`;
}

export function FoodFields({ step, method, species, part, readOnly, onChange }: FoodFieldsProps) {
  const food = step.food ?? {};
  const { food: _, ...silent } = step;
  const shown = productOf(
    { species, part },
    method.map((s) => (s.id === step.id ? silent : s)),
    step.id,
  );
  const put = (patch: { readonly [K in keyof Food]?: Food[K] | undefined }) => {
    const next: Record<string, unknown> = { ...food, ...patch };
    for (const [key, value] of Object.entries(next)) if (value === undefined) delete next[key];
    onChange(next as Food);
  };
  return (
    <details className="fold">
      <summary>
        What the food is: {shown.animals.length === 0 ? 'an animal not known' : shown.animals.join(', ')}
        {asked.map(({ key, form, label }) => {
          const is = food[key] ?? shown.forms[form];
          return is === false ? '' : `, ${label.toLowerCase()}${is === null ? ' not known' : ''}`;
        })}
      </summary>
      <p className="small quiet">
        Decides which rules it is held to. What is not known counts as the stricter answer.
      </p>
      <div className="fields">
        {asked.map(({ key, form, label }) => (
          <Choice
            key={key}
            label={label}
            value={food[key] === undefined ? 'method' : food[key] ? 'yes' : 'no'}
            readOnly={readOnly}
            options={[
              { value: 'method', label: `As the method shows: ${word(shown.forms[form])}` },
              { value: 'yes', label: 'Yes' },
              { value: 'no', label: 'No' },
            ]}
            onChange={(said: string) => put({ [key]: said === 'method' ? undefined : said === 'yes' })}
          />
        ))}
        <NumberField
          label="Fat"
          unit="%"
          optional
          value={food.fatPct ?? null}
          low={0}
          high={100}
          readOnly={readOnly}
          onChange={(v) => put({ fatPct: v ?? undefined })}
          hint="Of the whole piece. Empty: not known, the fattest column counts."
        />
        <NumberField
          label="Nitrite put in"
          unit="ppm"
          optional
          value={food.nitritePpm ?? null}
          low={0}
          high={5_000}
          readOnly={readOnly}
          onChange={(v) => put({ nitritePpm: v ?? undefined })}
          hint={nitriteHint(method, step.id)}
        />
      </div>
    </details>
  );
}
