package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import headcourse.page.PageServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;

/** The local page in a real browser, as a mason uses it: touch, keyboard, telephone. */
class PageInBrowserCheck {
  private static final Dimension DESK = new Dimension(1280, 900);
  private static final Dimension TELEPHONE = new Dimension(390, 844);
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private static ChromeDriver browser;

  @TempDir Path folder;
  private PageServer page;

  @BeforeAll
  static void open() {
    Optional<Path> program = found("headcourse.browser", "chromium", "google-chrome", "chrome");
    Optional<Path> driver = found("headcourse.driver", "chromedriver");
    if (program.isEmpty() || driver.isEmpty()) {
      System.out.println(
          "No browser: the page is not tried in one. Install Chromium and its driver, or give"
              + " -Dheadcourse.browser=PROGRAM -Dheadcourse.driver=PROGRAM.");
    }
    Assumptions.assumeTrue(program.isPresent() && driver.isPresent(), "no browser is installed");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program.get().toFile());
    // Without the sandbox, which a superuser's browser refuses; it opens nothing but our page.
    options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage");
    options.addArguments("--disable-gpu", "--hide-scrollbars");
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(driver.get().toFile()).build();
    browser = new ChromeDriver(service, options);
  }

  private static Optional<Path> found(String property, String... names) {
    String given = System.getProperty(property, "");
    if (!given.isEmpty()) {
      return Optional.of(Path.of(given)).filter(Files::isExecutable);
    }
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
        .filter(d -> !d.isEmpty())
        .flatMap(d -> Stream.of(names).map(n -> Path.of(d, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  @AfterAll
  static void quit() {
    if (browser != null) {
      browser.quit();
    }
  }

  @AfterEach
  void close() {
    if (page != null) {
      page.close();
    }
  }

  private void show(Dimension size, String job, String... options) throws IOException {
    List<String> args = new ArrayList<>(List.of("page", job));
    args.addAll(List.of(options));
    Arguments arguments = Arguments.parse(args, new ArrayList<>());
    page = PageServer.of(new PageDesk(folder, arguments), arguments.language(), 0);
    browser.manage().window().setSize(size);
    browser.get(page.address());
    until("drawn", () -> said() > 0 && !find("#picture svg").isEmpty());
  }

  private void begin() {
    assertEquals(0, run("new", "job.yaml"));
  }

  private int run(String... args) {
    PrintStream none = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    return Main.run(List.of(args), folder, none, none);
  }

  private interface Seen {
    boolean now() throws IOException;
  }

  private void until(String what, Seen seen) throws IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      try {
        if (seen.now()) {
          return;
        }
      } catch (org.openqa.selenium.StaleElementReferenceException e) {
        continue;
      }
    }
    if (!seen.now()) {
      picture("failed");
      throw new AssertionError(what + "; it says: " + live() + "\n" + console());
    }
  }

  private static String console() {
    return browser.manage().logs().get(LogType.BROWSER).getAll().toString();
  }

  /** Faults of the page itself; that a page before this one lost its server is none. */
  private String faults() {
    return browser.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(e -> e.getMessage().contains(page.address()))
        .toList()
        .toString();
  }

  private static List<WebElement> find(String selector) {
    return browser.findElements(By.cssSelector(selector));
  }

  private static WebElement one(String selector) {
    return browser.findElement(By.cssSelector(selector));
  }

  private static String live() {
    return one("#live").getText();
  }

  /** How often the page has said what the rules say. */
  private static long said() {
    return (Long) browser.executeScript("return Number(document.body.dataset.said || 0)");
  }

  private static WebElement field(String path) {
    return one("[data-path='" + path + "']");
  }

  private void type(String path, String value) throws IOException {
    WebElement field = field(path);
    field.clear();
    field.sendKeys(value, Keys.TAB);
    until(
        path + " is in the file",
        () -> Files.readString(folder.resolve("job.yaml")).contains(value));
  }

  private static void picture(String name) throws IOException {
    String to = System.getProperty("headcourse.pictures", "");
    if (!to.isEmpty()) {
      Files.write(Path.of(to, name + ".png"), browser.getScreenshotAs(OutputType.BYTES));
    }
  }

  @Test
  void sixNumbersOneBrokenCuredWithOneTouchAndDrawn() throws IOException {
    begin();
    String before = Files.readString(folder.resolve("job.yaml"));
    show(TELEPHONE, "job.yaml");
    picture("telephone-first");
    type("openings[0].width", "5' 3\"");
    type("openings[0].height", "7' 1\"");
    type("openings[0].reveal", "4 3/4");
    type("openings[0].wall-right", "3' 7\"");
    type("stone.thickness", "1 1/8");
    type("openings[0].wall-left", "3");
    until("refused", () -> !find("#sum .note.error [data-cure]").isEmpty());
    assertTrue(one("#picture").getAttribute("class").contains("old"));
    assertTrue(one("#old").isDisplayed());
    // Beside the value that it is about there is the same cure.
    assertFalse(find("#groups .note.error [data-cure]").isEmpty());
    picture("telephone-refused");
    WebElement cure = find("#sum .note.error [data-cure]").get(0);
    String words = cure.getText();
    cure.click();
    until("cured", () -> find("#sum .note.error").isEmpty());
    assertTrue(words.contains("bearing min: 3"), words);
    assertFalse(one("#picture").getAttribute("class").contains("old"));
    String after = Files.readString(folder.resolve("job.yaml"));
    assertTrue(after.contains("bearing: {min: 3, max: 10, target: 6}"), after);
    assertEquals(before.lines().count(), after.lines().count());
    for (String line : before.lines().toList()) {
      if (line.contains("    # ")) {
        assertTrue(after.contains(line.substring(line.indexOf("    # ")).strip()), line);
      }
    }
    picture("telephone-cured");
    one("#draw").click();
    until("drawn", () -> find("#files a").size() > 5);
    picture("telephone-drawn");
    run("draw", "job.yaml", "--out", "line");
    int files = 0;
    try (Stream<Path> all = Files.list(folder.resolve("line/job"))) {
      for (Path p : all.toList()) {
        Path same = folder.resolve("out/job").resolve(p.getFileName());
        assertArrayEquals(Files.readAllBytes(p), Files.readAllBytes(same), p.toString());
        files++;
      }
    }
    assertEquals(find("#files a").size(), files);
    assertEquals("[]", faults());
  }

  @Test
  void nothingThatAxeKnowsIsWrong() throws IOException {
    for (String language : List.of("en", "es")) {
      for (Dimension size : List.of(DESK, TELEPHONE)) {
        begun();
        show(size, "job.yaml", "--lang", language);
        String name = language + "-" + size.width;
        assertEquals(language, one("html").getAttribute("lang"));
        clean(name);
        picture(name);
        one("#where summary").click();
        browser.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
        one("#show-choices").click();
        until("choices", () -> find("#choices button").size() > 1);
        browser.executeScript("document.querySelector('#choose').scrollIntoView()");
        picture(name + "-choices");
        one("#show-sheets").click();
        until("sheets", () -> find("#sheets img").size() > 5);
        browser.executeScript("document.querySelector('#sheets').scrollIntoView()");
        picture(name + "-sheets");
        clean(name + " all open");
        type("openings[0].wall-left", "3");
        until("refused", () -> !find("#sum .note.error [data-cure]").isEmpty());
        clean(name + " refused");
        picture(name + "-refused");
        targets(name);
        assertEquals("[]", faults());
        page.close();
      }
    }
  }

  private void begun() throws IOException {
    Files.deleteIfExists(folder.resolve("job.yaml"));
    begin();
  }

  private static void clean(String where) {
    Results results =
        new AxeBuilder()
            .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
            .analyze(browser);
    for (Rule r : results.getViolations()) {
      StringBuilder s = new StringBuilder(where + ": " + r.getId() + ", " + r.getHelp());
      r.getNodes().forEach(n -> s.append('\n').append(n.getTarget()).append(' ').append(n.getHtml()));
      throw new AssertionError(s.toString());
    }
  }

  /** What is touched is 44 CSS pixels high and wide at least, and nothing is wider than the page. */
  private static void targets(String where) {
    Object small =
        browser.executeScript(
            """
            return [...document.querySelectorAll('a,button,input,select,summary')]
              .filter(e => !e.classList.contains('skip') && e.offsetParent)
              .filter(e => { const r = e.getBoundingClientRect(); return r.height < 44 || r.width < 44; })
              .map(e => e.outerHTML.slice(0, 120)).join('\\n');
            """);
    assertEquals("", small, where);
    Object wide =
        browser.executeScript(
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertEquals(0L, wide, where);
  }

  @Test
  void twiceAsLargeItStillFits() throws IOException {
    begun();
    // A window of 1280 at 200 % has 640 CSS pixels (WCAG 2.1, 1.4.4 and 1.4.10).
    show(new Dimension(640, 450), "job.yaml");
    targets("200 %");
    picture("twice");
  }

  @Test
  void byKeyboardAlone() throws IOException {
    begun();
    show(DESK, "job.yaml");
    Actions keys = new Actions(browser);
    keys.sendKeys(Keys.TAB, Keys.ENTER).perform();
    assertEquals("form", browser.switchTo().activeElement().getAttribute("id"));
    tabTo("[data-path='openings[0].wall-left']");
    keys.keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).sendKeys("3", Keys.ENTER).perform();
    until("refused", () -> !find("#groups .note.error [data-cure]").isEmpty());
    tabTo("#groups [data-cure]");
    new Actions(browser).sendKeys(Keys.ENTER).perform();
    until("cured", () -> find(".note.error").isEmpty());
    back("#draw");
    new Actions(browser).sendKeys(Keys.SPACE).perform();
    until("drawn", () -> find("#files a").size() > 5);
    assertEquals("result", browser.switchTo().activeElement().getAttribute("id"));
    assertTrue(Files.exists(folder.resolve("out/job/bench.pdf")));
  }

  private static void tabTo(String selector) {
    press(selector, new CharSequence[] {Keys.TAB});
  }

  private static void back(String selector) {
    press(selector, new CharSequence[] {Keys.chord(Keys.SHIFT, Keys.TAB)});
  }

  private static void press(String selector, CharSequence[] keys) {
    for (int i = 0; i < 200; i++) {
      boolean there =
          (Boolean)
              browser.executeScript("return document.activeElement.matches(arguments[0])", selector);
      if (there) {
        return;
      }
      browser.switchTo().activeElement().sendKeys(keys);
    }
    throw new AssertionError("the keyboard does not reach " + selector);
  }

  @Test
  void touchingAChoiceTakesItAndAnEditorsSaveShows() throws IOException {
    begun();
    show(TELEPHONE, "job.yaml");
    one("#show-choices").click();
    until("choices", () -> find("#choices button").size() > 1);
    one("#choices [data-letter='B']").click();
    until("taken", () -> !find("#choices [aria-pressed='true'][data-letter='B']").isEmpty());
    String job = Files.readString(folder.resolve("job.yaml"));
    assertTrue(job.contains("    choose: B ") && job.contains("    chosen: {"), job);
    assertTrue(one("#groups [data-laid]").isDisplayed());
    Files.writeString(folder.resolve("job.yaml"), job.replace("title: Garden shed", "title: Old shed"));
    until("shown", () -> one("#title").getText().startsWith("Old shed"));
    one("#back").click();
    until("given back", () -> find("#choices [aria-pressed='true']").isEmpty());
    assertTrue(Files.readString(folder.resolve("job.yaml")).contains("    # choose: B"));
  }
}
