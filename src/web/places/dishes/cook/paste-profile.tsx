import { useState } from 'react';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { type ProfilePoint, parseProfile } from './shapes.ts';

/** Two columns from a spreadsheet: distance along, diameter. */
export function PasteProfile({ onProfile }: { readonly onProfile: (profile: ProfilePoint[]) => void }) {
  const units = useUnits();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const unit = units === 'US' ? 'inches' : 'mm';
  const take = () => {
    const read = parseProfile(text, units === 'US' ? 25.4 : 1);
    if (!read.ok) {
      setWrong(read.message);
      return;
    }
    setWrong(null);
    setText('');
    onProfile(read.profile);
  };
  return (
    <details className="fold">
      <summary>Paste a table of diameters</summary>
      <div className="stack">
        <TextField
          label={`Two columns, in ${unit}: distance along, diameter`}
          value={text}
          lines={5}
          onChange={setText}
          error={wrong}
          hint="As copied from a spreadsheet; a line of headings is passed over."
        />
        <Button onPress={take} disabled={text.trim() === ''}>
          Use this table
        </Button>
      </div>
    </details>
  );
}
