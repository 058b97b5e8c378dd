namespace FieldSession.Store;
