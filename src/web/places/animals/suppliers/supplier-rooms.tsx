import { Route, Switch } from 'wouter';
import { BeginSpecification } from '../specification/begin-specification.tsx';
import { SpecificationPage } from '../specification/specification-page.tsx';
import { SupplierPage } from './supplier-page.tsx';
import { Suppliers } from './suppliers.tsx';
import './supply.css';

const base = '/k/:kitchenId/animals/suppliers';

/** Who the animals come from, what is asked of them in writing, and how they kept to it. */
export function SupplierRooms() {
  return (
    <Switch>
      <Route path={base} component={Suppliers} />
      <Route path={`${base}/:supplierId/specifications/new`}>
        {({ supplierId }) => <BeginSpecification key={supplierId} supplierId={supplierId} />}
      </Route>
      <Route path={`${base}/:supplierId/specifications/:specificationId`}>
        {({ specificationId }) => (
          <SpecificationPage key={specificationId} specificationId={specificationId} />
        )}
      </Route>
      <Route path={`${base}/:supplierId`}>
        {({ supplierId }) => <SupplierPage key={supplierId} supplierId={supplierId} />}
      </Route>
    </Switch>
  );
}
