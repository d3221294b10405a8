import Link from "next/link";

type Props = { address: string; beds: readonly { readonly id: string; readonly name: string }[]; bought: string | null };

/** The beds in the order in which they are planted; each can be moved one earlier or later. The order is part of the page's address. */
export function BedOrder({ address, beds, bought }: Props) {
  if (beds.length < 2) return null;
  const moved = (from: number, to: number): string => {
    const ids = beds.map(({ id }) => id);
    const [id] = ids.splice(from, 1);
    if (id) ids.splice(to, 0, id);
    return `${address}?${new URLSearchParams({ beds: ids.join(","), ...(bought ? { bought } : {}) })}`;
  };
  return (
    <section className="bed-order" aria-labelledby="bed-order">
      <h2 id="bed-order">Order of planting</h2>
      <ol>
        {beds.map(({ id, name }, index) => (
          <li key={id}>
            <span className="bed-order-name">{name}</span>
            {index > 0 ? (
              <Link className="screen-only" href={moved(index, index - 1)} aria-label={`${name} earlier`} scroll={false}>
                earlier
              </Link>
            ) : null}
            {index < beds.length - 1 ? (
              <Link className="screen-only" href={moved(index, index + 1)} aria-label={`${name} later`} scroll={false}>
                later
              </Link>
            ) : null}
          </li>
        ))}
      </ol>
    </section>
  );
}
