/** The day at the bench, large and one-handed. */
export function BenchPage({ id }: { id: string }) {
  return <main className="alone">{id}</main>;
}
