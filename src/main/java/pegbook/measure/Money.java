package pegbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An amount of money, exact to the digits given.
 *
 * @param amount the amount
 * @param currency ISO 4217 code, three capital letters
 */
public record Money(BigDecimal amount, String currency) {
  public Money {
    if (!currency.matches("[A-Z]{3}")) {
      throw new IllegalArgumentException("currency " + currency);
    }
  }

  /**
   * Sum of two amounts.
   *
   * @throws IllegalArgumentException when the currencies differ
   */
  public Money plus(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException("cannot add " + other.currency + " to " + currency);
    }
    return new Money(amount.add(other.amount), currency);
  }

  /** The amount for a number of things, such as 2.25 cubic yards. */
  public Money times(BigDecimal count) {
    return new Money(amount.multiply(count), currency);
  }

  /** Digits behind the point that the currency is paid in. */
  public int digits() {
    return Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
  }

  /** Set to what can be paid; halfway goes up. */
  public Money payable() {
    return new Money(amount.setScale(digits(), RoundingMode.HALF_UP), currency);
  }

  /** The amount for a whole number of things. */
  public Money times(long count) {
    return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
  }
}
