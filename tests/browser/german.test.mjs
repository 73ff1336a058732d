// A whole visit in German, with its decimal comma.

import { wholeVisit } from "./whole-visit.mjs";

wholeVisit("de", { point: ",", unread: "viel", note: "Neue Schrauben, 25 Nm" });
