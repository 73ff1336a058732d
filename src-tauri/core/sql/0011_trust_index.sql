-- Each line that comes in asks whether its device was met.
CREATE INDEX trust_of_device ON trust (device);
