-- Who took a step: the name of a device, or of the person a machine knows. NULL: nobody was named, as where one machine has the file alone.
ALTER TABLE step ADD COLUMN who TEXT;
