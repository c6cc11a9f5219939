/**
 * What the desktop's preload puts on the page: the studio's interface with the two parts that cannot cross into
 * a page as they are. A signal cannot, so work that may be stopped has a name and is stopped by it. Types only.
 */
import type {
  Answer,
  ExportReport,
  ExportRequest,
  ExportStep,
  Host,
  PrintChoice,
  PrintedBooklet,
  PrintJob,
} from './host.ts';

export interface DesktopBridge extends Omit<Host, 'print' | 'export'> {
  print(id: string, job: PrintJob, choice: PrintChoice): Promise<Answer<PrintedBooklet>>;
  export(
    id: string,
    job: PrintJob,
    request: ExportRequest,
    progress: (step: ExportStep) => void,
  ): Promise<Answer<ExportReport>>;
  stop(id: string): void;
}
