import { connectOffice, tellEvents } from "./connect-office.ts";
import { loadOffice } from "./load-office.ts";
import { addNewerMembers } from "./newer-members.ts";
import { newService, type Service } from "./service.ts";

/**
 * Stands in for the spreadsheet: from here on whatever the true client library sends is answered from a workbook
 * in memory. `version` is the newest set of ExcelApi that this spreadsheet knows.
 */
export function officeHost(version = "1.20", service = newService()): Service {
  loadOffice();
  addNewerMembers();
  connectOffice(service.answer, version);
  service.tell = tellEvents;
  return service;
}
