import { useEffect, useState } from 'react';
import { getAccess, phoneOf } from '../api/casebook.ts';
import { toCapturePath } from '../state/route.ts';
import { Link } from './link.tsx';

/** The way of a phone into this case; nothing where no phone can reach the server. */
export function Phone({ id }: { id: string }) {
  const [phones, setPhones] = useState(false);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    getAccess().then(
      (told) => setPhones(told.phones),
      () => undefined, // the page says elsewhere that the server does not answer
    );
  }, []);
  if (!phones) return null;
  return (
    <div className="phone">
      <button type="button" className="btn" aria-expanded={open} onClick={() => setOpen(!open)}>
        Phone
      </button>
      {open && (
        <div className="phone-code">
          <img src={phoneOf(id)} width="220" height="220" alt="link to this case as a QR code" />
          <p>Point the camera of a phone in the same network at it. Whoever has it can change the casebook.</p>
          <Link to={toCapturePath(id)}>Open here instead</Link>
        </div>
      )}
    </div>
  );
}
