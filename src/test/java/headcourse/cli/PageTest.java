package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.page.PageServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The local page, asked as a browser asks it. */
class PageTest {
  private static final String JOB =
      """
      # The barn's doors.
      units: in    # or mm
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}    # weighed
      openings:
        - mark: D1
          width: 6'            # as drawn
          # height: 7'         # from its foot to the soffit
          wall-left: 3'
          wall-right: 3'
          head:
            stones: {min: 5, max: 9, target: 7}    # beside the key
      """;

  @TempDir Path folder;
  private final HttpClient client = HttpClient.newHttpClient();
  private PageServer page;

  @BeforeEach
  void serve() throws IOException {
    Files.writeString(file(), JOB);
    List<String> args = List.of("page", "barn.yaml");
    Arguments arguments = Arguments.parse(args, new ArrayList<>());
    page = PageServer.of(new PageDesk(folder, arguments), "", 0);
  }

  @AfterEach
  void close() {
    page.close();
  }

  private Path file() {
    return folder.resolve("barn.yaml");
  }

  private String origin() {
    return page.address().substring(0, page.address().indexOf('/', "http://".length()));
  }

  private HttpResponse<byte[]> send(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofByteArray());
  }

  private HttpResponse<byte[]> get(String route) throws Exception {
    return send(HttpRequest.newBuilder(URI.create(page.address() + route)));
  }

  private HttpRequest.Builder posting(String route, String... values) {
    StringBuilder body = new StringBuilder("opening=0");
    for (int i = 0; i < values.length; i += 2) {
      body.append('&').append(values[i]).append('=');
      body.append(URLEncoder.encode(values[i + 1], StandardCharsets.UTF_8));
    }
    return HttpRequest.newBuilder(URI.create(page.address() + route))
        .POST(BodyPublishers.ofString(body.toString()));
  }

  private String post(String route, String... values) throws Exception {
    HttpResponse<byte[]> r = send(posting(route, values).header("Origin", origin()));
    assertEquals(200, r.statusCode(), new String(r.body(), StandardCharsets.UTF_8));
    return new String(r.body(), StandardCharsets.UTF_8);
  }

  @Test
  void onlyTheWholeAddressOpensIt() throws Exception {
    HttpResponse<byte[]> whole = get("");
    assertEquals(200, whole.statusCode());
    String html = new String(whole.body(), StandardCharsets.UTF_8);
    assertTrue(html.contains("<html lang=\"en\">"), html);
    assertFalse(html.contains("{{"), html);
    assertFalse(html.replace("http://www.w3.org", "").contains("://"), "nothing from elsewhere");
    assertTrue(whole.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
    String policy = whole.headers().firstValue("Content-Security-Policy").orElseThrow();
    assertTrue(policy.startsWith("default-src 'none'; script-src 'sha256-"), policy);
    for (String other : List.of("/", "/look", "/0123456789abcdef0123456789abcdef/look")) {
      var r = send(HttpRequest.newBuilder(URI.create(origin() + other)));
      assertEquals(403, r.statusCode(), other);
    }
  }

  @Test
  void nobodyElseIsServed() throws Exception {
    assertEquals(403, send(posting("undo")).statusCode(), "no origin");
    for (String other : List.of("http://example.org", "null", origin() + ".example.org")) {
      assertEquals(403, send(posting("undo").header("Origin", other)).statusCode(), other);
      var read =
          HttpRequest.newBuilder(URI.create(page.address() + "look")).header("Origin", other);
      assertEquals(403, send(read).statusCode(), other);
    }
    var across = HttpRequest.newBuilder(URI.create(page.address() + "look"));
    assertEquals(403, send(across.header("Sec-Fetch-Site", "cross-site")).statusCode());
    var asks = HttpRequest.newBuilder(URI.create(page.address() + "look"));
    asks.method("OPTIONS", BodyPublishers.noBody()).header("Origin", origin());
    assertEquals(405, send(asks).statusCode());
    // By its number, but under another name: a name server that was made to point here.
    URI address = URI.create(page.address());
    for (String host : List.of("example.org", "127.0.0.1", "example.org:" + address.getPort())) {
      try (Socket socket = new Socket("127.0.0.1", address.getPort())) {
        String head = "GET " + address.getPath() + "look HTTP/1.1\r\nHost: " + host;
        socket
            .getOutputStream()
            .write((head + "\r\nConnection: close\r\n\r\n").getBytes("US-ASCII"));
        String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(answer.startsWith("HTTP/1.1 403 "), host + "\n" + answer);
      }
    }
  }

  @Test
  void nothingOutsideIsReadOrWritten() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
    for (String path :
        List.of(
            "out/../barn.yaml",
            "out/..%2Fbarn.yaml",
            "out/%2e%2e/secret.txt",
            "sheet/../look",
            "out//etc/passwd",
            "out/barn.yaml",
            "secret.txt",
            "out/layout.json")) {
      assertEquals(404, get(path).statusCode(), path);
    }
    for (String path : List.of("frame", "stock.file", "shop", "openings[7].width", "x: y", "")) {
      HttpRequest.Builder bad = posting("set", "set." + path, "secret.txt");
      assertEquals(400, send(bad.header("Origin", origin())).statusCode(), path);
    }
    // What a job names is read in its own folder alone.
    Path inner = Files.createDirectories(folder.resolve("inner/jobs"));
    Files.writeString(inner.resolve("a.yaml"), JOB + "stock: {file: ../../secret.csv}\n");
    Files.writeString(folder.resolve("secret.csv"), "mark,arris\nC1,24\n");
    Arguments arguments = Arguments.parse(List.of("page", "jobs/a.yaml"), new ArrayList<>());
    PageDesk desk = new PageDesk(folder.resolve("inner"), arguments);
    assertTrue(desk.beside("../../secret.csv").isEmpty());
    assertTrue(desk.beside("a.yaml").isPresent());
    assertEquals("secret", Files.readString(secret));
    assertEquals(JOB, Files.readString(file()));
  }

  @Test
  void whatIsTooLargeIsRefused() throws Exception {
    HttpRequest.Builder large = posting("set", "set.job.title", "x".repeat(70_000));
    assertEquals(413, send(large.header("Origin", origin())).statusCode());
    assertEquals(414, get("look?opening=" + "0".repeat(3000)).statusCode());
    assertTrue(post("set", "set.job.title", "x".repeat(5000)).contains("can't write job.title"));
    assertEquals(JOB, Files.readString(file()));
  }

  @Test
  void aFieldIsWrittenAndCommentsAndOrderStay() throws Exception {
    String look =
        post("set", "set.openings[0].width", "6' 2\"", "set.openings[0].height", "7' 4\"");
    assertTrue(look.contains("\"value\": \"6' 2\\\"\""), look);
    String now =
        JOB.replace("6'            #", "6' 2\"         #")
            .replace("# height: 7'         #", "height: 7' 4\"        #");
    assertEquals(now, Files.readString(file()));
    post("undo");
    assertEquals(JOB, Files.readString(file()));
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(List.of(file()), all.toList(), "nothing is left beside it");
    }
  }

  @Test
  void aFileThatCantBeReadIsNotOverwritten() throws Exception {
    Files.writeString(file(), JOB + "  broken: [\n");
    String look = post("set", "set.openings[0].width", "7'");
    assertTrue(look.contains("\"readable\": false"), look);
    assertEquals(JOB + "  broken: [\n", Files.readString(file()));
    assertTrue(post("say").contains("\"severity\": \"error\""));
  }

  @Test
  void theHeadIsDrawnAnewAsItIsTypedAndNothingIsSaved() throws Exception {
    String first = post("picture");
    assertTrue(first.contains("<svg "), first);
    String wider = post("picture", "set.openings[0].width", "7'");
    assertTrue(wider.contains("<svg "), wider);
    assertNotEquals(first, wider);
    assertEquals("{}\n", post("picture", "set.openings[0].width", "seven"));
    String said = post("say", "set.openings[0].width", "seven");
    assertTrue(said.contains("\"path\": \"openings[0].width\""), said);
    assertTrue(said.contains("seven"), said);
    assertEquals(JOB, Files.readString(file()));
  }

  @Test
  void aCureSetsTheField() throws Exception {
    post("set", "set.openings[0].wall-left", "3");
    String said = post("say");
    Matcher cure = Pattern.compile("\"number\": \"(\\d+)\",\\s+\"text\": \"([^\"]*)").matcher(said);
    assertTrue(cure.find(), said);
    post("set", "cure", cure.group(1));
    assertFalse(post("say").contains("\"severity\": \"error\""), Files.readString(file()));
    assertEquals("bearing min: 3", cure.group(2));
    assertTrue(Files.readString(file()).contains("\n      bearing: {min: 3}\n"));
    assertTrue(post("set").contains("\"value\": \"3\""), "the field shows it");
    assertTrue(Files.readString(file()).contains("# beside the key"));
  }

  @Test
  void itDrawsTheSameBytesAsTheCommandLine() throws Exception {
    String drawn = post("draw");
    assertTrue(drawn.contains("\"done\": true"), drawn);
    PrintStream none = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    Main.run(List.of("draw", "barn.yaml", "--out", "line"), folder, none, none);
    int files = 0;
    try (Stream<Path> all = Files.list(folder.resolve("line/barn"))) {
      for (Path p : all.toList()) {
        String name = p.getFileName().toString();
        byte[] bytes = Files.readAllBytes(p);
        assertArrayEquals(
            bytes, Files.readAllBytes(folder.resolve("out/barn").resolve(name)), name);
        assertArrayEquals(bytes, get("out/" + name).body(), name);
        files++;
      }
    }
    assertEquals(10, files);
  }

  @Test
  void aChoiceIsTakenWithItsSettingsAndGivenBack() throws Exception {
    String all = new String(get("choices?opening=0").body(), StandardCharsets.UTF_8);
    assertTrue(all.contains("\"letter\": \"B\"") && all.contains("<svg "), all);
    post("choose", "letter", "B");
    String job = Files.readString(file());
    assertTrue(job.contains("    choose: B\n    chosen: {stones: {widths: ["), job);
    assertFalse(post("say").contains("by its letter alone"));
    post("choose", "letter", "");
    job = Files.readString(file());
    assertTrue(job.contains("    # choose: B\n    # chosen: {"), job);
  }

  @Test
  void sheetsAreShown() throws Exception {
    String list = new String(get("sheets").body(), StandardCharsets.UTF_8);
    assertTrue(list.contains("\"name\": \"wall\"") && list.contains("\"name\": \"bench\""), list);
    HttpResponse<byte[]> sheet = get("sheet/wall/0.svg");
    assertEquals("image/svg+xml", sheet.headers().firstValue("Content-Type").orElseThrow());
    assertTrue(new String(sheet.body(), StandardCharsets.UTF_8).contains("<svg "));
    assertEquals(404, get("sheet/wall/99.svg").statusCode());
  }

  @Test
  void whatIsSavedElsewhereShows() throws Exception {
    String look = new String(get("look").body(), StandardCharsets.UTF_8);
    Matcher seen = Pattern.compile("\"seen\": \"([^\"]*)\"").matcher(look);
    assertTrue(seen.find());
    URI wait = URI.create(page.address() + "wait?seen=" + seen.group(1));
    CompletableFuture<HttpResponse<String>> waiting =
        client.sendAsync(HttpRequest.newBuilder(wait).build(), BodyHandlers.ofString());
    Thread.sleep(150);
    assertFalse(waiting.isDone());
    Files.writeString(file(), JOB.replace("6'  ", "5'  "));
    assertFalse(waiting.get().body().contains(seen.group(1)));
    // What is typed then is written into what was saved.
    post("set", "set.openings[0].height", "7'");
    assertTrue(Files.readString(file()).contains("width: 5'            # as drawn"));
  }
}
