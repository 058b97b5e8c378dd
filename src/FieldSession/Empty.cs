namespace FieldSession;
