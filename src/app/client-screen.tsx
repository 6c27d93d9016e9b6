import { ClientPage } from '../views/client/client-page';
import { Drawing } from './drawing';

interface ClientScreenProps {
  readonly onTakeCopy: () => void;
  readonly onOpenOwn: () => void;
}

export function ClientScreen(props: ClientScreenProps) {
  return (
    <ClientPage {...props}>
      <Drawing />
    </ClientPage>
  );
}
