package perkilo.desk;

/** Follows the work of a service, and may ask it to stop. Several threads may call it at once. */
public interface Watch {

    /** Ignores progress, and never stops the work. */
    Watch NONE = new Watch() {

        @Override
        public void at(Stage stage, int done, int of) {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /**
     * Receives the progress of the work.
     *
     * @param done how many pieces of this stage are done
     * @param of how many there are; 0 if that is not known
     */
    void at(Stage stage, int done, int of);

    /** Whether the work should stop; called now and then, and very often by a search. */
    boolean isCancelled();
}
