import { useState } from 'react';
import type { TreeNode } from '../../../../contract/breakdown.ts';
import {
  addPlace,
  branchOf,
  changePlace,
  depthOf,
  lawful,
  movePlace,
  removePlace,
  renamePlace,
  type Stopped,
  shiftPlace,
  stoppedByLaw,
} from '../../../../contract/tree-edit.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';

const becomesOptions: readonly { value: TreeNode['becomes']; label: string }[] = [
  { value: 'part', label: 'A lot of its own' },
  { value: 'bone', label: 'Bone, not kept' },
  { value: 'drip', label: 'Drip' },
  { value: 'bin', label: 'Thrown away' },
  { value: 'by-product', label: 'By-product, never food' },
  { value: 'sold', label: 'Sold as it is' },
];
const useOptions: readonly { value: TreeNode['use']; label: string }[] = [
  { value: 'menu', label: 'On the menu' },
  { value: 'kitchen', label: 'In stock or staff food' },
  { value: 'thrown away', label: 'Thrown away' },
];
const said: Readonly<Record<TreeNode['becomes'], string>> = {
  step: 'cut further',
  part: 'a lot of its own',
  bone: 'bone, not kept',
  drip: 'drip',
  bin: 'thrown away',
  'by-product': 'by-product',
  sold: 'sold',
};

export interface TreeLayoutProps {
  readonly species: string;
  readonly nodes: readonly TreeNode[];
  /** The most the animals may be old, where their papers say so. */
  readonly ageMonths: number | null;
  readonly onChange: (nodes: TreeNode[]) => void;
}

/** How the animal is cut, as an outline; each place opens to be renamed, moved, cut further or left out. */
export function TreeLayout({ species, nodes, ageMonths, onChange }: TreeLayoutProps) {
  const kitchen = useKitchen();
  const [opened, setOpened] = useState<string | null>(null);
  const stopped = stoppedByLaw(nodes, species, kitchen.place, { ageMonths });
  const put = (next: TreeNode[], what?: string) => {
    const before = [...nodes];
    onChange(lawfulNew(next, nodes, species, kitchen.place, ageMonths));
    if (what !== undefined) say(what, () => onChange(before));
  };
  const node = nodes.find((n) => n.id === opened);
  return (
    <>
      <ul className="tree" aria-label={`How the ${species} is cut`}>
        {nodes.map((n) => {
          const stop = stopped.get(n.id);
          return (
            <li key={n.id} style={{ paddingInlineStart: `${depthOf(nodes, n.id) * 1.4}rem` }}>
              <button type="button" className="place-name" onClick={() => setOpened(n.id)}>
                {n.name}
              </button>{' '}
              <span className="quiet">
                {n.parent === null ? 'the whole' : said[n.becomes]}
                {n.becomes === 'part' && n.use !== 'menu'
                  ? `, ${n.use === 'kitchen' ? 'for stock' : 'thrown away'}`
                  : ''}
              </span>
              {stop === undefined || n.becomes === 'bin' || n.becomes === 'bone' ? null : (
                <LawNote stop={stop} kept={n.becomes === 'part' || n.becomes === 'sold'} />
              )}
            </li>
          );
        })}
      </ul>
      {node === undefined ? null : (
        <PlaceDialog
          key={node.id}
          node={node}
          nodes={nodes}
          species={species}
          stop={stopped.get(node.id)}
          onClose={() => setOpened(null)}
          onPut={put}
        />
      )}
    </>
  );
}

/** A new or renamed part that the law stops is a by-product at once; what somebody chose otherwise knowingly stays. */
function lawfulNew(
  next: TreeNode[],
  before: readonly TreeNode[],
  species: string,
  place: Parameters<typeof lawful>[2],
  ageMonths: number | null,
): TreeNode[] {
  const held = lawful(next, species, place, { ageMonths });
  const stopped = stoppedByLaw(next, species, place, { ageMonths });
  return next.map((n, i) => {
    const was = before.find((b) => b.id === n.id);
    const fresh = was === undefined || was.name !== n.name;
    return fresh || stopped.get(n.id)?.never === true ? (held[i] ?? n) : n;
  });
}

function LawNote({ stop, kept }: { readonly stop: Stopped; readonly kept: boolean }) {
  return (
    <p className={kept ? 'law-note law-note-open' : 'law-note'}>
      {stop.never ? '■ Never food' : '◆ By-product by default: ask'}: {stop.law.reason}{' '}
      <span className="quiet">({stop.law.citation})</span>
      {kept
        ? ' Kept as a part: nothing made of it is signed until your authority has said so in writing.'
        : ''}
    </p>
  );
}

function PlaceDialog(props: {
  readonly node: TreeNode;
  readonly nodes: readonly TreeNode[];
  readonly species: string;
  readonly stop: Stopped | undefined;
  readonly onClose: () => void;
  readonly onPut: (nodes: TreeNode[], what?: string) => void;
}) {
  const { node, nodes, species, stop, onClose, onPut } = props;
  const [name, setName] = useState(node.name);
  const [piece, setPiece] = useState('');
  const root = node.parent === null;
  const cut = node.becomes === 'step';
  const below = branchOf(nodes, node.id);
  const parents = nodes.filter(
    (n) =>
      !below.has(n.id) &&
      (n.becomes === 'step' || n.becomes === 'part') &&
      !(stop?.never === true && n.id === node.id),
  );
  const rename = () => {
    if (name.trim() !== '' && name.trim() !== node.name) onPut(renamePlace(nodes, node.id, name));
  };
  const close = () => {
    rename();
    onClose();
  };
  return (
    <Dialog open onClose={close} title={root ? `The whole ${node.name}` : node.name}>
      {root ? null : (
        <TextField
          label="Name"
          value={name}
          onChange={setName}
          maxLength={80}
          onBlur={rename}
          onEnter={close}
        />
      )}
      {root || cut ? null : (
        <Choice
          label="What becomes of it"
          value={node.becomes}
          options={
            stop?.never === true
              ? becomesOptions.filter((o) => o.value !== 'part' && o.value !== 'sold')
              : becomesOptions
          }
          onChange={(becomes) => onPut(changePlace(nodes, node.id, { becomes }))}
        />
      )}
      {stop === undefined ? null : (
        <LawNote stop={stop} kept={node.becomes === 'part' || node.becomes === 'sold'} />
      )}
      {node.becomes !== 'part' ? null : (
        <div className="fields">
          <Choice
            label="Used"
            value={node.use}
            options={useOptions}
            onChange={(use) => onPut(changePlace(nodes, node.id, { use }))}
          />
          <NumberField
            label="Pieces of an animal"
            unit="pieces"
            optional
            value={node.piecesPerAnimal}
            low={0.01}
            high={1_000}
            onChange={(piecesPerAnimal) => onPut(changePlace(nodes, node.id, { piecesPerAnimal }))}
          />
        </div>
      )}
      {node.becomes !== 'part' && node.becomes !== 'step' ? null : (
        <div className="row">
          <TextField label="Cut from it" value={piece} onChange={setPiece} maxLength={80} />
          <Button
            onPress={() => {
              rename();
              if (piece.trim() === '') throw new Error('Write what is cut from it.');
              onPut(addPlace(nodes, species, node.id, piece.trim()));
              setPiece('');
            }}
          >
            Add it
          </Button>
        </div>
      )}
      {root ? null : (
        <>
          <Choice
            label="Comes from"
            value={node.parent ?? ''}
            options={parents.map((n) => ({ value: n.id, label: n.name }))}
            onChange={(parent) => onPut(movePlace(nodes, node.id, parent))}
          />
          <div className="row">
            <Button onPress={() => onPut(shiftPlace(nodes, node.id, -1))}>Earlier</Button>
            <Button onPress={() => onPut(shiftPlace(nodes, node.id, 1))}>Later</Button>
            <Button
              kind="danger"
              onPress={() => {
                onPut(
                  removePlace(nodes, node.id),
                  `${node.name} is left out${below.size > 1 ? ', with what is cut from it' : ''}.`,
                );
                onClose();
              }}
            >
              Leave it out
            </Button>
          </div>
        </>
      )}
    </Dialog>
  );
}
