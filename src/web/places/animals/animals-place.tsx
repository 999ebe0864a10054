export function AnimalsPlace() {
  return (
    <div className="page stack">
      <h1>Animals</h1>
    </div>
  );
}
