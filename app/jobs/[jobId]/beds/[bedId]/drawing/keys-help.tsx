import { PLAN_KEYS } from "./plan-keys";

/** The keys of the drawing, under it. */
export function KeysHelp() {
  return (
    <details className="keys-help screen-only">
      <summary id="drawing-keys">Keys on the drawing</summary>
      <table>
        <tbody>
          {PLAN_KEYS.map(([keys, does]) => (
            <tr key={keys}>
              <th scope="row">
                <kbd>{keys}</kbd>
              </th>
              <td>{does}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">
        A press chooses a plant with its group, a second press the plant alone (Alt at once), Shift adds. Drag over open ground to choose what lies in the band; by touch one finger
        drags the sheet, two zoom, and “Choose several” lets presses add up.
      </p>
    </details>
  );
}
