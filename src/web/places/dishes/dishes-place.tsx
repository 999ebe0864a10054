export function DishesPlace() {
  return (
    <div className="page stack">
      <h1>Dishes</h1>
    </div>
  );
}
