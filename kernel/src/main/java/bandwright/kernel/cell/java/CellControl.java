// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.File;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.EngineTerminationException;
import jdk.jshell.spi.ExecutionControl.InternalException;
import jdk.jshell.spi.ExecutionControl.NotImplementedException;
import jdk.jshell.spi.SPIResolutionException;

/** Runs what JShell compiles on the calling thread and keeps what came of it: values and exceptions as they are. */
final class CellControl extends DirectExecutionControl {
    private final CellLoader loader;
    private volatile boolean running;
    private @Nullable Object value;
    private @Nullable Throwable thrown;

    CellControl(CellLoader loader) {
        super(new Loading(loader));
        this.loader = loader;
    }

    CellLoader loader() {
        return loader;
    }

    /** Whether the code of a cell runs now, which may be interrupted, and not the compiler, whose files that would close. */
    boolean isRunning() {
        return running;
    }

    /** Does something of ours that an interrupt may end as it may end the code of a cell. */
    <T> T during(Supplier<T> work) {
        running = true;
        try {
            return work.get();
        } finally {
            running = false;
        }
    }

    /** Forgets what the last piece of code gave. */
    void reset() {
        value = null;
        thrown = null;
    }

    /** What the last piece of code gave. */
    @Nullable
    Object value() {
        return value;
    }

    /** What the last piece of code ended with, if it did not end well. */
    @Nullable
    Throwable thrown() {
        return thrown;
    }

    @Override
    protected String invoke(Method method) throws Exception {
        running = true;
        try {
            value = method.invoke(null);
            return "";
        } catch (InvocationTargetException failure) {
            Throwable cause = failure.getCause();
            // This one is JShell's own: something the code names is not defined yet.
            thrown = cause instanceof SPIResolutionException ? null : cause;
            throw failure;
        } finally {
            running = false;
        }
    }

    @Override
    public String varValue(String className, String variable) throws InternalException, EngineTerminationException {
        return "";
    }

    private record Loading(CellLoader loader) implements LoaderDelegate {
        @Override
        public void load(ClassBytecodes[] classes)
                throws ClassInstallException, NotImplementedException, EngineTerminationException {
            boolean[] installed = new boolean[classes.length];
            for (ClassBytecodes one : classes) {
                loader.declare(one.name(), one.bytecodes());
            }
            for (int i = 0; i < classes.length; i++) {
                try {
                    installed[i] = loader.loadClass(classes[i].name()) != null;
                } catch (ClassNotFoundException | LinkageError failure) {
                    throw new ClassInstallException("load: " + failure, installed);
                }
            }
        }

        @Override
        public void classesRedefined(ClassBytecodes[] classes) {}

        @Override
        public void addToClasspath(String paths) {
            for (String path : paths.split(File.pathSeparator, -1)) {
                loader.add(Path.of(path));
            }
        }

        @Override
        public Class<?> findClass(String name) throws ClassNotFoundException {
            return loader.loadClass(name);
        }
    }
}
