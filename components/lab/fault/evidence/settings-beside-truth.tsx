import type { SettingsCard } from '@/lib/faults/evidence';
import { settingsRows } from './settings-paper';

type SettingsBesideTruthProps = {
  card: SettingsCard;
  /** What a card without any mistake would say. */
  right: SettingsCard;
};

/** What was entered beside what would have been right. */
export function SettingsBesideTruth({ card, right }: SettingsBesideTruthProps) {
  const rightRows = settingsRows(right);
  const rows = settingsRows(card).map(({ name, value }, index) => {
    const rightValue = rightRows[index]?.value ?? '';
    return { name, entered: value, right: rightValue, wrong: value !== rightValue };
  });
  return (
    <>
      <div className="table-frame overflow-x-auto">
        <table>
          <caption className="sr-only">What was entered, and what would have been right</caption>
          <thead>
            <tr>
              <td />
              <th scope="col">Entered</th>
              <th scope="col">Right</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, entered, right: rightValue, wrong }) => (
              <tr key={name}>
                <th scope="row">
                  {name}
                  {wrong ? <span className="block font-normal text-danger">here it is</span> : null}
                </th>
                <td className={wrong ? 'bg-danger-soft font-semibold' : undefined}>{entered}</td>
                <td>{rightValue}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {rows.some(({ wrong }) => wrong) ? null : (
        <p className="mt-2 text-sm text-soft">Every line is right: it was not the settings.</p>
      )}
    </>
  );
}
