import { Sign } from "./drawing.tsx";

/** Which marker is whose. */
export function Legend({ entries }: { readonly entries: readonly { name: string; place: number }[] }) {
  return (
    <ul class="legend">
      {entries.map(({ name, place }) => (
        <li key={name}>
          <Sign place={place} /> {name}
        </li>
      ))}
    </ul>
  );
}
