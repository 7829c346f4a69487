package turnalike.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;

/** A line to a server that is cut just after a word has reached the server, before its answer comes back, so many times. */
final class CutLine implements AutoCloseable {
    private final ServerSocket here;
    private final int there;
    private final String word;
    private final AtomicInteger cuts;

    private CutLine(ServerSocket here, int there, String word, int cuts) {
        this.here = here;
        this.there = there;
        this.word = word;
        this.cuts = new AtomicInteger(cuts);
    }

    static CutLine to(int port, String word, int cuts) {
        try {
            CutLine line = new CutLine(new ServerSocket(0, 10, InetAddress.getLoopbackAddress()), port, word, cuts);
            daemon(line::accept);
            return line;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    int port() {
        return here.getLocalPort();
    }

    /** How often it is still to be cut. */
    int left() {
        return Math.max(0, cuts.get());
    }

    private static void daemon(Runnable work) {
        Thread thread = new Thread(work, "cut line");
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (!here.isClosed()) {
            try {
                Socket near = here.accept();
                Socket far = new Socket(InetAddress.getLoopbackAddress(), there);
                Cut cut = new Cut();
                daemon(() -> carry(near, far, cut, true));
                daemon(() -> carry(far, near, cut, false));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private static final class Cut {
        private volatile boolean now;
    }

    private void carry(Socket from, Socket to, Cut cut, boolean asks) {
        byte[] bytes = new byte[1 << 16];
        try (from;
                to;
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
                String text = new String(bytes, 0, count, StandardCharsets.ISO_8859_1);
                if (asks && text.contains(word) && cuts.getAndDecrement() > 0) {
                    cut.now = true;
                }
                if (!asks && cut.now) {
                    return; // the server has done it; nobody is told
                }
                out.write(bytes, 0, count);
                out.flush();
            }
        } catch (IOException cutOff) {
            return;
        }
    }

    @Override
    public void close() {
        try {
            here.close();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }
}
