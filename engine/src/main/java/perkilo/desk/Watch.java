package perkilo.desk;

/** Looks on while a service works, and may ask it to stop. May be asked by several threads at once. */
public interface Watch {

    /** Looks away, and stops nothing. */
    Watch NONE = new Watch() {

        @Override
        public void at(Stage stage, int done, int of) {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /**
     * Work has come so far.
     *
     * @param done how many pieces of this stage are done
     * @param of how many there are; 0 where that is not known
     */
    void at(Stage stage, int done, int of);

    /** Whether the work should stop; asked now and then, and very often by a search. */
    boolean isCancelled();
}
